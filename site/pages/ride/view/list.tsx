import { words } from "../../../say/measure/ride.js";
import type { KeptRide } from "../../../store/rides.js";
import { Button } from "../../../ui/button.js";
import { recording } from "../record/record.js";
import { lookAt, nameOf, remove, rides, saveTable } from "../state.js";

function Entry({ ride }: { readonly ride: KeptRide }) {
  const name = nameOf(ride);
  return (
    <li>
      <span>
        {name}, {ride.car}
        {ride.from === "table" && `, ${words.fromTable}`}
      </span>
      <span class="acts">
        <Button aria-label={words.lookAt(name)} work={() => void lookAt(ride.id)}>
          {words.look}
        </Button>
        <Button aria-label={words.saveThe(name)} work={() => void saveTable(ride)}>
          {words.save}
        </Button>
        <Button aria-label={words.removeThe(name)} work={() => void remove(ride)}>
          {words.remove}
        </Button>
      </span>
    </li>
  );
}

/** The rides of this device; the one that is being recorded is not among them yet. */
export function Rides() {
  const all = rides.value?.filter(({ id }) => id !== recording.value?.ride.id);
  if (all === undefined) return null;
  return (
    <>
      <h2>{words.ridesHead}</h2>
      {all.length === 0 && <p>{words.noRides}</p>}
      <ul class="rides">
        {all.map((ride) => (
          <Entry key={ride.id} ride={ride} />
        ))}
      </ul>
    </>
  );
}

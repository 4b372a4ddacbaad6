import { type Car, demoCar, frontShareOf, totalMassOf } from "@rollbook/lib";
import { ownCars, reader } from "@rollbook/page";
import { format } from "../../../say/units.js";
import { carWords as words } from "../../../say/your-car/cars.js";
import { classWords } from "../../../say/your-car/classes.js";
import { drafts } from "../../../store/car-drafts.js";
import { Button } from "../../../ui/button.js";
import { FileInput } from "../../../ui/file-input.js";
import type { Draft } from "../model/draft.js";
import { asFile, copy, edit, remove, show, startFromDemo } from "../state/doing.js";
import { handOn } from "../state/hand-on.js";
import { nameOfDraft } from "../state/kept.js";
import { openDraft } from "../state/open.js";
import { takeInFiles } from "../state/take-in-files.js";

/** The reader's cars: which of them the course shows, and what can be done with each. */
export function CarList() {
  const { cars, current } = ownCars.now.value;
  const all = drafts.now.value;
  const shown = cars.some(({ name }) => name === current) ? current : demoCar.name;
  const fresh = all.filter(({ of }) => !cars.some(({ name }) => name === of));
  return (
    <section class="cars" aria-labelledby="cars-title">
      <h2 id="cars-title">{words.cars}</h2>
      <fieldset>
        <legend>{words.courseShows}</legend>
        <ul>
          {[demoCar, ...cars].map((car) => (
            <CarLine
              key={car.name}
              car={car}
              shown={car.name === shown}
              draft={all.find(({ of }) => of === car.name)}
            />
          ))}
          {fresh.map((draft) => (
            <FreshLine key={draft.id} draft={draft} />
          ))}
        </ul>
      </fieldset>
      <div class="doing">
        <Button id="start" work={startFromDemo}>
          {words.startCopy(demoCar.name)}
        </Button>
        <FileChooser />
      </div>
    </section>
  );
}

function about(car: Car): string {
  const { mass, ...where } = totalMassOf(car);
  const front = frontShareOf({ mass, ...where }, car.wheelbase);
  const weight = format("mass", mass, 0, reader.units);
  return `${weight}, ${format("share", front, 0)} ${words.inFront}`;
}

function CarLine({
  car,
  shown,
  draft,
}: {
  readonly car: Car;
  readonly shown: boolean;
  readonly draft: Draft | undefined;
}) {
  const own = car === demoCar;
  const told = [own ? words.own : "", about(car), draft ? words.unsaved : ""].filter(Boolean);
  return (
    <li>
      <label>
        <input
          type="radio"
          name="shown"
          value={car.name}
          checked={shown}
          onChange={() => void show(car.name)}
        />
        <span>
          <b>{car.name}</b> <small>{told.join(" · ")}</small>
        </span>
      </label>
      <span class="doing">{!own && <CarButtons car={car} id={draft?.id ?? car.name} />}</span>
    </li>
  );
}

/** What can be done with a car of the reader's, of which a draft may be open. */
function CarButtons({ car, id }: { readonly car: Car; readonly id: string }) {
  const { name } = car;
  return (
    <>
      <EditButton id={id} name={name} />
      <NamedButton text={words.asFile} name={name} work={() => asFile(car)} />
      <NamedButton
        text={classWords.handOn}
        name={name}
        work={() => void handOn({ what: "car", of: car })}
      />
      <NamedButton text={words.copy} name={name} work={() => copy(car)} />
      <NamedButton text={words.remove} name={name} work={() => remove(car)} />
    </>
  );
}

function NamedButton({
  text,
  name,
  work,
  disabled = false,
}: {
  readonly text: string;
  readonly name: string;
  readonly work: () => void;
  readonly disabled?: boolean;
}) {
  return (
    <Button aria-label={`${text}: ${name}`} work={work} disabled={disabled}>
      {text}
    </Button>
  );
}

function EditButton({ id, name }: { readonly id: string; readonly name: string }) {
  const isOpen = openDraft.value?.id === id;
  const text = isOpen ? words.editing : words.edit;
  return <NamedButton text={text} name={name} work={() => edit(id)} disabled={isOpen} />;
}

/** A car that was begun and never saved. */
function FreshLine({ draft }: { readonly draft: Draft }) {
  const name = nameOfDraft(draft);
  return (
    <li class="fresh">
      <span>
        <b>{name}</b> <small>{words.notSaved}</small>
      </span>
      <span class="doing">
        <EditButton id={draft.id} name={name} />
      </span>
    </li>
  );
}

function FileChooser() {
  return (
    <label class="choose" for="files">
      {`${words.open} `}
      <FileInput id="files" accept=".json,application/json" multiple take={takeInFiles} />
    </label>
  );
}

import { keptAside } from "@rollbook/page";
import { carWords as words } from "../../../say/your-car/cars.js";
import { Button } from "../../../ui/button.js";
import { dropAside, fileOfAside, mendAside, readAside } from "../state/aside.js";

/** A kept car that this course cannot show: why, and the ways to have it. */
function AsideCar({ part }: { readonly part: unknown }) {
  const { name, why, mend } = readAside(part);
  return (
    <div class="problem">
      <p>{words.aside(name)}</p>
      <p>{why}</p>
      <div class="doing">
        {mend && <Button work={() => mendAside(part, mend)}>{words.mend}</Button>}
        <Button work={() => fileOfAside(part)}>{words.asFile}</Button>
        <Button work={() => dropAside(part, name)}>{words.remove}</Button>
      </div>
    </div>
  );
}

/** Kept cars that are out of range by now, or cannot be read. */
export function AsideCars() {
  const parts = keptAside.value.get("cars") ?? [];
  return (
    <>
      {parts.map((part) => (
        <AsideCar key={JSON.stringify(part)} part={part} />
      ))}
    </>
  );
}

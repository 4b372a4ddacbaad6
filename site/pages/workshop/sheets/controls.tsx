import { Button } from "../../../ui/button.js";
import { Chips } from "../../../ui/chips.js";
import { words } from "../words.js";
import { allKinds, choose, choosePaper, chosen, isChosen, paperSizes } from "./chosen.js";

const { sheets: said } = words;

const sizes = paperSizes.map((value) => ({ value, text: said.papers[value] }));

/** What to print, and on which paper. */
export function Controls({
  hasCards,
  onTheWall,
}: {
  /** Whether hands go to a car, so that there are cards. */
  readonly hasCards: boolean;
  readonly onTheWall: () => void;
}) {
  return (
    <div class="controls">
      <Chips
        id="paper"
        question={said.paper}
        choices={sizes}
        chosen={chosen.value.paper}
        choose={choosePaper}
      />
      <WhichSheets />
      <p class="tools">
        <Button id="print-sheets" large work={() => print()}>
          {said.print}
        </Button>
        <Button id="open-sheet-wall" work={onTheWall}>
          {said.wall}
        </Button>
      </p>
      <p class="quiet">{said.screenHelp}</p>
      {hasCards && !isChosen("key") && <SureOfCards />}
    </div>
  );
}

function WhichSheets() {
  return (
    <fieldset class="places">
      <legend>{said.which}</legend>
      {allKinds.map((kind) => (
        <label key={kind} class="check" for={`sheet-${kind}`}>
          <input
            type="checkbox"
            id={`sheet-${kind}`}
            checked={isChosen(kind)}
            onChange={({ currentTarget }) => choose(kind, currentTarget.checked)}
          />
          {said.kinds[kind]}
        </label>
      ))}
    </fieldset>
  );
}

/** Asks before the answer key goes with the cards. */
function SureOfCards() {
  return (
    <div class="cards-sure">
      <p class="quiet">{said.cardsSay}</p>
      <Button id="cards-sure" work={() => choose("key", true)}>
        {said.cardsSure}
      </Button>
    </div>
  );
}

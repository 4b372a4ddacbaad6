import { carWords as words } from "../../../say/your-car/cars.js";
import { Button } from "../../../ui/button.js";
import { begin } from "../state/doing.js";
import { close, type Problem, problems } from "../state/take-in-files.js";

/** All that is wrong with a file, and the offer to mend it where that can be done. */
function FaultyFile({ problem }: { readonly problem: Problem }) {
  const { file, faults, mend } = problem;
  const open = () => {
    close(problem);
    begin(mend);
  };
  return (
    <div class="problem" role="alert">
      <p>{words.faulty(file)}</p>
      <ul>
        {faults.map((fault) => (
          <li key={fault}>{fault}</li>
        ))}
      </ul>
      {mend && <p class="note">{words.mendNote}</p>}
      <div class="doing">
        {mend && <Button work={open}>{words.mend}</Button>}
        <Button work={() => close(problem)}>{words.close}</Button>
      </div>
    </div>
  );
}

/** The files that could not be taken as they are. */
export function FaultyFiles() {
  return (
    <div>
      {problems.value.map((problem, i) => (
        <FaultyFile key={i} problem={problem} />
      ))}
    </div>
  );
}

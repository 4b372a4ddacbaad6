import { type IdeaName, misconceptions } from "@rollbook/lib";
import { words } from "../../../say/questions/words.js";
import { topicOf } from "./ask.js";

/** A choice among the fifteen. */
export function TopicChoice({
  chosen,
  choose,
}: {
  readonly chosen: IdeaName;
  readonly choose: (idea: IdeaName) => void;
}) {
  return (
    <label class="topic">
      {words.topic}{" "}
      <select
        value={chosen}
        onChange={({ currentTarget }) => choose(currentTarget.value as IdeaName)}
      >
        {misconceptions.map(({ idea }) => (
          <option key={idea} value={idea} selected={idea === chosen}>
            {topicOf(idea)}
          </option>
        ))}
      </select>
    </label>
  );
}

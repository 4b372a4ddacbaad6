import { words } from "../words.js";

/** What a view says that has no day to work with, and where to get one. */
export function NoDay({ sentence }: { readonly sentence: string | undefined }) {
  return (
    <p>
      {sentence ?? words.noDay} <a href="#plan">{words.toPlan}</a>.
    </p>
  );
}

/** Answers and files every prediction that is open, or all but the last of a page. Runs in the page. */
export function fileEvery(butLast: boolean): void {
  const forms = () => [...document.querySelectorAll<HTMLFormElement>("form.filing")];
  const next = () => forms().find((form) => form.getClientRects().length > 0);
  const last = butLast ? forms().at(-1) : undefined;
  for (let form = next(); form && form !== last; form = next()) {
    form.querySelector<HTMLInputElement>("input[type=radio]")?.click();
    const reason = form.querySelector<HTMLInputElement>("input[name$=reason]");
    if (reason) reason.value = "it feels so";
    form.querySelector<HTMLInputElement>(".inline input[type=radio]")?.click();
    form.querySelector<HTMLButtonElement>("button[type=submit]")?.click();
    if (form.getClientRects().length > 0) throw new Error("A prediction was not taken.");
  }
}

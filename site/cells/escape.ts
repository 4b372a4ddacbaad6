/** Text made safe inside HTML content and quoted attributes. */
export function escapeHtml(text: string): string {
  const entities: Record<string, string> = {
    "&": "&amp;",
    "<": "&lt;",
    ">": "&gt;",
    '"': "&quot;",
  };
  return text.replace(/[&<>"]/g, (character) => entities[character] ?? character);
}

/** The course's styles for the inside of an output; put in by the bundle. */
declare const STYLES: string;

let sheet: CSSStyleSheet | undefined;

export function styles(): CSSStyleSheet {
  if (!sheet) {
    sheet = new CSSStyleSheet();
    sheet.replaceSync(STYLES);
  }
  return sheet;
}

/** What a figure of the page shows: each mark with its attributes in a fixed order, and its sentence. Runs in the page. */
export const pictureText = (figure: Element): string =>
  [...figure.querySelectorAll("[data-layer] *, .says")]
    .map(({ tagName, attributes, textContent }) => {
      const said = [...attributes].map(({ name, value }) => `${name}="${value}"`).sort();
      return tagName === "P" ? textContent : [tagName, ...said, textContent].join(" ");
    })
    .join("\n");

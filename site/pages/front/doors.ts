import { effect } from "@preact/signals-core";
import { chosenRole, element } from "@rollbook/page";
import { words } from "../../say/front.js";
import { roles } from "../../say/places.js";

/** Lets each door make the menu that of its kind of reader, and whole again. */
export function openDoors(): void {
  for (const door of document.querySelectorAll<HTMLElement>(".door")) {
    const role = roles.find((one) => one === door.dataset.role);
    if (role === undefined) continue;
    const button = element("button", { type: "button" });
    button.addEventListener("click", () => {
      void chosenRole.set(chosenRole.now.value === role ? "" : role);
    });
    effect(() => {
      const isChosen = chosenRole.now.value === role;
      button.textContent = isChosen ? words.notForMe : words.forMe;
      door.toggleAttribute("data-chosen", isChosen);
    });
    door.append(button);
  }
}

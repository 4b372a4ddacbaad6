/** What the scripts of pages share with the cells: `@rollbook/page`. */
export { today } from "@rollbook/lib";
export { type Cars, chosenCar, ownCars } from "../../store/cars.js";
export { chapterWork, type DuePlace, doneOf, dueWork } from "../../store/chapter-work.js";
export { courseAddress } from "../../store/course-address.js";
export {
  type Document,
  documentOf,
  forget,
  letAsideGo,
  openAll,
  type Shape,
  textUnder,
} from "../../store/document.js";
export { answeredTo } from "../../store/exercises.js";
export { predictionOf, seenAfter } from "../../store/predictions.js";
export { chosenRole } from "../../store/role.js";
export { allSecond, putSecond } from "../../store/second-copy.js";
export { keep, keptBelow } from "../../store/texts.js";
export { countRefusals, keptAside, refusals } from "../../store/told.js";
export { chosenUnits } from "../../store/units.js";
export { escapeHtml } from "../escape.js";
export { exerciseInner, predictInner, workedInner } from "../inner-html.js";
export type { Mark } from "../marks.js";
export { tablesOf } from "../numbers.js";
export { format, reader, spell } from "../reader.js";
export { type Chart, type Drawing, type Panel, startValues } from "../spec.js";
export { words } from "../words.js";
export { announcer } from "./announce.js";
export { chapterAddress } from "./chapter-address.js";
export { addressCopied, copied } from "./copy.js";
export { element, placeOf } from "./element.js";
export { offerFrame } from "./frames.js";
export { isStill } from "./motion.js";
export type { Slider } from "./named-choice.js";
export { numbersFold } from "./numbers.js";
export { type LivePicture, livePicture } from "./picture.js";
export { forFileName, saveFile } from "./save-file.js";
export { shareAddress } from "./share-link.js";
export { slider } from "./slider.js";
export { stateCopied } from "./state-link.js";
export { fill, fillFrame, ownScript, ownWorker } from "./trusted.js";

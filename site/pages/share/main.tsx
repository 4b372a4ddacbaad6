import { placeOf } from "@rollbook/page";
import { render } from "preact";
import { Share } from "./view.js";

const place = placeOf("share");
if (place) render(<Share />, place);

import { placeOf } from "@rollbook/page";
import { render } from "preact";
import { Search } from "./view.js";

const place = placeOf("search");
if (place) render(<Search />, place);

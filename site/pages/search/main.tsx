import { placeOf } from "@rollbook/page";
import { show } from "../../ui/show.js";
import { Search } from "./view.js";

const place = placeOf("search");
if (place) show(<Search />, place);

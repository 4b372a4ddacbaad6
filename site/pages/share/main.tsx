import { placeOf } from "@rollbook/page";
import { show } from "../../ui/show.js";
import { Share } from "./view.js";

const place = placeOf("share");
if (place) show(<Share />, place);

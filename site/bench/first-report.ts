/** Prints how long the first report of a process takes, ms: from the car to its text. */
import { demoCar } from "../../lib/car/demo-car.js";
import { reportText } from "../report/report-text.js";
import { setUpReport } from "../report/set-up-report.js";

const started = performance.now();
reportText(setUpReport(demoCar, { lateralAcceleration: 9, speed: 25 }), demoCar, "metric");
console.log(performance.now() - started);

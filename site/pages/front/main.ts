import { figure } from "@rollbook/cells";
import { openDoors } from "./doors.js";
import { askFirst } from "./first-question.js";
import { livingCar } from "./living.js";
import { showProgress } from "./progress.js";

askFirst();
figure(livingCar());
showProgress();
openDoors();

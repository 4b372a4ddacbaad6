import { figure } from "@rollbook/cells";
import { livingCar } from "./living.js";

figure(livingCar());

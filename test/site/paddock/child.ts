import { startPaddock } from "../../../site/paddock/start.js";

/** A paddock of its own, that can be killed: says where it is once it answers. */
const [folder = "", course = "", port = "0"] = process.argv.slice(2);
void startPaddock({ folder, course, port: Number(port), address: "127.0.0.1" }).then(({ place }) =>
  process.stdout.write(`${JSON.stringify({ ...place, address: place.address })}\n`),
);

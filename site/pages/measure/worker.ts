/** What to measure next, worked out beside the page. */
import "../../bands/worker.js";

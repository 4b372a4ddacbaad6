/** How sure figures are, worked out beside the page. */
import "../../bands/worker.js";

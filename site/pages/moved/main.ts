/** Leads from a former address to the page that is meant, with what follows the address. Stands alone. */
const on = document.querySelector<HTMLAnchorElement>("a#on");
if (on) location.replace(on.href + location.search + location.hash);

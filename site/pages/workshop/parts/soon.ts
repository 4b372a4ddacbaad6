/** Does work that takes a moment after the page has shown that it is at it; a later call replaces it. */
export function soon(): (work: () => void) => void {
  let latest = 0;
  return (work) => {
    latest += 1;
    const mine = latest;
    requestAnimationFrame(() =>
      setTimeout(() => {
        if (mine === latest) work();
      }),
    );
  };
}

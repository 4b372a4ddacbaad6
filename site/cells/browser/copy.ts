/** Copies a text; false where the browser does not let a page do so, or has no clipboard here. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Copies an address; false where it went into the address bar instead. */
export async function addressCopied(address: string): Promise<boolean> {
  if (await copied(address)) return true;
  history.replaceState(null, "", address);
  return false;
}

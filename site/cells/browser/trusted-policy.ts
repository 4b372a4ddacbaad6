interface Makers {
  createPolicy<Rules>(name: string, rules: Rules): Rules;
}

/** What makes trusted texts by these rules, in a browser that knows Trusted Types; the rules themselves elsewhere. */
export function trustedPolicy<Rules>(name: string, rules: Rules): Rules {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: Makers };
  return trustedTypes?.createPolicy(name, rules) ?? rules;
}

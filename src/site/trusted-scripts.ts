/** The part of the Trusted Types interface used here; TypeScript's DOM types do not have it yet. */
interface PolicyFactory {
  readonly defaultPolicy: unknown;
  createPolicy(name: "default", rules: { createScriptURL(address: string): string }): unknown;
}

/**
 * Lets scripts of this site be started by address: the service worker, and the worker of the search. The content security policy
 * requires Trusted Types; this is its only policy, and it makes no markup, so that no text can become HTML on any page.
 */
export function trustOwnScripts(): void {
  const factory = (globalThis as { trustedTypes?: PolicyFactory }).trustedTypes;
  if (!factory || factory.defaultPolicy) return;
  const home = new URL(import.meta.env.BASE_URL, location.href).href;
  factory.createPolicy("default", {
    createScriptURL(address) {
      if (new URL(address, location.href).href.startsWith(home)) return address;
      throw new TypeError(`${address} is no script of this site`);
    },
  });
}

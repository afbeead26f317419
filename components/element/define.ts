import { VERSION } from '../../core/version.js';

/** Of the elements that were to be registered. */
export const tags: string[] = [];

/**
 * Registers a class under its name. A name that is taken gives back the registered class, because a page cannot construct any
 * other; a second copy of another version is told of.
 */
export function define<C extends CustomElementConstructor & { readonly version?: string }>(
  tag: string,
  elementClass: C,
  registry: CustomElementRegistry = customElements,
): C {
  tags.push(tag);
  const registered = registry.get(tag) as C | undefined;
  if (!registered) {
    registry.define(tag, elementClass);
    return elementClass;
  }
  if (registered !== elementClass && registered.version !== VERSION) {
    console.warn(
      `<${tag}> ${registered.version ?? 'of unknown version'} is already registered; ${VERSION} is not used.`,
    );
  }
  return registered;
}

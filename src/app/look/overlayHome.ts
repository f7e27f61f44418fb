/** Where lists and menus that open over the page are put: a landmark of its own in index.html. */
export function overlayHome(): HTMLElement | undefined {
  return document.getElementById('overlays') ?? undefined;
}

import { createContext } from 'react';

/**
 * True inside a dialog. What lies outside an open dialog is hidden from screen readers, so lists that open from inside
 * it belong to it, and not to the landmark for lists that open over the page.
 */
export const InDialog = createContext(false);

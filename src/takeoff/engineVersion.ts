/** Rises when the same plan with the same rates may give another number; an issued estimate says which one made it. */
export const ENGINE_VERSION = '1';

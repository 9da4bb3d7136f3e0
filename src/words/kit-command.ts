/** What leads to my kit; the words of its pages are loaded with it. */

export const KIT_COMMAND = 'My kit';

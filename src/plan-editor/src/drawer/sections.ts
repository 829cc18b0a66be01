/** The sections of the drawer in their order. Each label stands in the lexicon of docs/decisions.md. */
export const sections = [
  { id: 'toDo', label: 'To do' },
  { id: 'findOut', label: 'Find out' },
  { id: 'people', label: 'People' },
  { id: 'areas', label: 'Areas' },
  { id: 'spot', label: 'This spot' },
  { id: 'numbers', label: 'By numbers' },
  { id: 'about', label: 'About' },
] as const;

export type SectionId = (typeof sections)[number]['id'];

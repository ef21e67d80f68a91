/** What a message wants: an answer, an action, nothing (it tells), or it answers itself. */
export const families = ['Query', 'Command', 'Signal', 'Response', 'Acknowledge', 'Registration'] as const;
export type Family = (typeof families)[number];

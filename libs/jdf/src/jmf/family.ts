export const families = ['Query', 'Command', 'Signal', 'Response', 'Acknowledge', 'Registration'] as const;
export type Family = (typeof families)[number];

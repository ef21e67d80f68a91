import { signal } from '@preact/signals';

export type Theme = 'auto' | 'light' | 'dark';
export const themes: readonly Theme[] = ['auto', 'light', 'dark'];

const KEPT = 'sidelay.theme';
const isTheme = (text: string | null): text is Theme => themes.includes(text as Theme);

export const theme = signal<Theme>('auto');

/** Takes the choice of last time. `auto` follows the device by style sheet alone. */
export function recallTheme(): void {
  const kept = localStorage.getItem(KEPT);
  chooseTheme(isTheme(kept) ? kept : 'auto');
}

export function chooseTheme(choice: Theme): void {
  theme.value = choice;
  localStorage.setItem(KEPT, choice);
  if (choice === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = choice;
}

import { signal } from '@preact/signals';

/** Where the reader is, as the part of the address behind the hash, without a closing slash: `/`, `/jobs/ID`, `/new`. */
export const path = signal('/');

const read = (): void => {
  const raw = location.hash.replace(/^#/, '').replace(/\/+$/, '');
  path.value = raw === '' ? '/' : raw;
};

export function followAddress(): void {
  read();
  addEventListener('hashchange', read);
}

export const jobAddress = (ticketId: string): string => `#/jobs/${encodeURIComponent(ticketId)}`;

export function go(to: string): void {
  location.hash = to;
}

/** Waits for Ctrl-C or a polite stop, then stops what runs. A second signal is left to do its worst. */
export async function untilStopped(stop: () => Promise<void>): Promise<void> {
  await new Promise<void>((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
  await stop();
}

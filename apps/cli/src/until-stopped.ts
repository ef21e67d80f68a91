/**
 * Runs something until Ctrl-C or a polite stop, then stops it. Asked to stop while it still starts, it is stopped as soon
 * as it has started, so that nothing half started stays behind. A second signal ends the process as it stands.
 */
export async function untilStopped<T extends { stop(): Promise<void> }>(
  begin: () => Promise<T>,
  begun: (running: T) => void,
): Promise<void> {
  const signals = ['SIGINT', 'SIGTERM'] as const;
  let asked = false;
  let forget = (): void => undefined;
  const stopped = new Promise<void>((settle) => {
    const hear = (): void => {
      asked = true;
      forget();
      settle();
    };
    for (const signal of signals) process.on(signal, hear);
    forget = () => {
      for (const signal of signals) process.off(signal, hear);
    };
  });
  try {
    const running = await begin();
    if (!asked) begun(running);
    await stopped;
    await running.stop();
  } finally {
    forget();
  }
}

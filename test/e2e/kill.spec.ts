import { DEVICES, Hub, journeyOf, submitFile, type TicketJson, untilEnded } from '../kit/journey.js';
import { until } from '../kit/server-process.js';

/** Waits until a step of the ticket has counted some, but not all, of its pieces. */
async function untilHalfway(hub: Hub, id: string, step: string): Promise<void> {
  await until(async () => {
    const ticket = await hub.get<TicketJson>(`/api/v1/tickets/${id}`);
    const row = ticket.steps.find((candidate) => candidate.id === step)!;
    return row.status !== 'Waiting';
  }, `${step} to begin`);
}

describe('a server that is killed in the middle of a run', () => {
  it('goes on three times, completes the ticket, and counts every sheet once', async () => {
    const hub = await Hub.open({ speed: 300 });
    try {
      hub.startPlant(DEVICES);
      const id = await submitFile(hub, 'tickets/paper-boat-300.jdf');
      for (const step of ['plates-1', 'print-1', 'fold-1']) {
        await untilHalfway(hub, id, step);
        await hub.server.kill('SIGKILL');
        await hub.start();
      }
      await untilEnded(hub, id);
      const { ticket, plan, consumption, story } = await journeyOf(hub, id);
      expect(ticket.status).toBe('Completed');
      for (const step of ticket.steps) {
        expect([step.id, step.good]).toEqual([
          step.id,
          plan.steps.find((row) => row.id === step.id)!.outAmount,
        ]);
      }
      const print = ticket.steps.find((step) => step.id === 'print-1')!;
      const paper = consumption.find((row) => row.unit === 'sheets')!;
      expect(paper.actual).toBe(print.good + print.waste);
      expect(paper.actual).toBeLessThanOrEqual(plan.sheets[0]!.sheetsToPress);
      expect(story.filter((event) => event.type === 'ticket.accepted')).toHaveLength(1);
      const ids = await hub.events(0);
      expect(ids).toEqual(ids.map((_, n) => n + 1));
    } finally {
      await hub.close();
    }
  }, 300_000);
});

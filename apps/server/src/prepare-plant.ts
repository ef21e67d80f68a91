import type { Plant } from '#libs/craft';
import { type DeviceWish, type EnginePorts, moveStock, registerDevice } from '#libs/flow';

/**
 * Makes the plant's machines and opening stock known, once. A machine that speaks JMF has no address until it registers;
 * it is listed all the same, so that people see what is missing.
 */
export async function preparePlant(ports: EnginePorts): Promise<void> {
  const known = new Set((await ports.store.devices()).map((device) => device.id));
  for (const device of ports.plant.devices) {
    if (known.has(device.id)) continue;
    const wish: DeviceWish = {
      id: device.id,
      kind: device.kind,
      name: device.name,
      driver: driverOf(device.kind),
      url: null,
    };
    await registerDevice(ports, wish);
  }
  await openStock(ports);
}

/** People work at benches, our own workstation imposes and separates, everything else speaks JMF once it has registered. */
function driverOf(kind: DeviceWish['kind']): string {
  if (kind === 'bench') return 'bench';
  return kind === 'prepress' ? 'automatic' : 'jmf';
}

async function openStock(ports: EnginePorts): Promise<void> {
  const booked = new Set((await ports.store.stock()).map((row) => row.item));
  for (const { item, name, unit, amount } of openingStock(ports.plant)) {
    if (booked.has(item)) continue;
    await ports.store.change({}, () => ({ stockItems: [{ item, name, unit }], result: null }));
    if (amount > 0)
      await moveStock(
        ports,
        {
          item,
          unit,
          amount,
          from: 'supplier',
          to: 'store',
          reason: 'opening stock of the plant definition',
        },
        'the plant definition',
      );
  }
}

interface Opening {
  readonly item: string;
  readonly name: string;
  readonly unit: string;
  readonly amount: number;
}

/** Papers in sheets, plates, and inks in kg, under the names that plans use for them. */
function openingStock(plant: Plant): readonly Opening[] {
  return [
    ...plant.stocks.map((stock) => ({
      item: stock.id,
      name: stock.name,
      unit: 'sheets',
      amount: stock.onHand,
    })),
    ...plant.plates.map((plate) => ({
      item: plate.id,
      name: plate.id,
      unit: 'plates',
      amount: plate.onHand,
    })),
    ...plant.inks.flatMap((set) =>
      set.names.map((ink) => ({
        item: `${set.id}/${ink}`,
        name: `${ink} (${set.id})`,
        unit: 'kg',
        amount: set.onHandKg[ink] ?? 0,
      })),
    ),
  ];
}

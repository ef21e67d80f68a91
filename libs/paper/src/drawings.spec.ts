import { XMLValidator } from 'fast-xml-parser';
import { type Plan, planJob } from '#libs/craft';
import { demoOrder, demoPlant } from '../../../test/kit/demo-plant.js';
import { valueIn } from '../../../test/kit/value-in.js';
import { drawCuts, drawFolds, drawSheet } from './index.js';

const plant = demoPlant();

function plan(file: string): Plan {
  return valueIn(planJob(demoOrder(file, plant), plant));
}

const count = (text: string, part: string): number => text.split(part).length - 1;
const goose = plan('06-goose-committee.json');

describe('drawings', () => {
  it('are well-formed documents of their own', () => {
    const flyer = plan('05-flyer.json');
    const all = [
      drawSheet(goose, 0, 'front'),
      drawSheet(goose, 1, 'back'),
      drawCuts(goose, 1),
      drawFolds(goose, 0),
      drawSheet({ ...flyer, name: 'A & B <"quoted">' }, 0, 'front'),
      drawCuts(flyer, 0),
    ];
    for (const svg of all) expect(XMLValidator.validate(svg)).toBe(true);
  });

  it('show every page of a side with its folio and the gripper teeth below', () => {
    const svg = drawSheet(goose, 0, 'front');
    for (const cell of goose.sheets[0]?.front ?? []) expect(svg).toContain(`>${cell.page}</text>`);
    expect(svg).toContain('>lay</text>');
    expect(svg).toContain('>feed</text>');
    expect(svg).toContain('>grain</text>');
  });

  it('turn a page whose head points down', () => {
    const svg = drawSheet(goose, 0, 'front');
    expect(count(svg, 'transform="rotate(180 ')).toBe(4);
    expect(count(svg, 'transform="rotate(0 ')).toBe(4);
  });

  it('name every cut with its gauge and print the caution of the guillotine', () => {
    const flyer = plan('05-flyer.json');
    const svg = drawCuts(flyer, 0);
    for (const cut of flyer.cuts) expect(svg).toContain(`gauge ${cut.gaugeMm} mm`);
    expect(svg).toContain('Caution. Guillotine');
  });

  it('write on each pile which version it is', () => {
    const svg = drawCuts(plan('12-tickets.json'), 0);
    expect(count(svg, 'Sat matinee</text>')).toBe(6);
  });

  it('name every fold with its unit and stop and print the caution of the folder', () => {
    const svg = drawFolds(goose, 0);
    expect(svg).toContain('plate 1: stop 450 mm');
    expect(svg).toContain('knife 2: stop 213 mm');
    expect(svg).toContain('Caution. Folder');
    expect(svg).toContain('lip 24 mm on the high folios');
  });

  it('are empty where the plan has no such sheet', () => {
    expect(drawSheet(goose, 9, 'front')).toContain('no sheet');
    expect(drawCuts(goose, 0)).toContain('nothing to cut');
    expect(drawFolds(goose, 9)).toContain('nothing to fold');
  });
});

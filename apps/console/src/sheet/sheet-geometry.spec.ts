import type { PlanCell, PlanSheet } from '#libs/craft';
import { cellShape, grippedAt, pagesFromGripper } from './sheet-geometry.js';

const cell = (more: Partial<PlanCell>): PlanCell => ({
  part: 'body',
  page: 1,
  xMm: 30,
  yMm: 16,
  widthMm: 200,
  heightMm: 300,
  rotation: 0,
  signature: 's',
  ...more,
});

// Coordinates and rotation as in the plan document: origin lower left, y up, head turned counter-clockwise.
describe('sheet drawing', () => {
  it('turns y over, for the sheet counts from the gripper up and the drawing from the top down', () => {
    const shape = cellShape(cell({}), 640);
    expect([shape.xMm, shape.topMm, shape.widthMm, shape.heightMm]).toEqual([30, 640 - 16 - 300, 200, 300]);
    expect(shape.centre).toEqual([130, 474]);
  });

  it('puts the head line up, left, down and right as the page turns counter-clockwise', () => {
    const side = (rotation: PlanCell['rotation']): string => {
      const { head, centre } = cellShape(cell({ rotation }), 640);
      const [x, y] = [(head[0] + head[2]) / 2 - centre[0], (head[1] + head[3]) / 2 - centre[1]];
      if (Math.abs(x) > Math.abs(y)) return x < 0 ? 'left' : 'right';
      return y < 0 ? 'up' : 'down';
    };
    expect(([0, 90, 180, 270] as const).map(side)).toEqual(['up', 'left', 'down', 'right']);
  });

  it('turns the folio the other way round than the contract counts, for a drawing turns clockwise', () => {
    expect(
      ([0, 90, 180, 270] as const).map((rotation) => cellShape(cell({ rotation }), 640).turnDeg),
    ).toEqual([0, 270, 180, 90]);
  });

  it('grips the tail of the back only where the sheet is turned head over tail', () => {
    const sheet = { gripperMm: 10, tailMm: 8, turn: 'headOverTail' } as PlanSheet;
    expect(grippedAt(sheet, 'front')).toEqual({ edge: 'gripper', mm: 10 });
    expect(grippedAt(sheet, 'back')).toEqual({ edge: 'tail', mm: 8 });
    expect(grippedAt({ ...sheet, turn: 'sideways' }, 'back')).toEqual({ edge: 'gripper', mm: 10 });
  });

  it('reads pages from the gripper up and from left to right', () => {
    const cells = [cell({ page: 5, yMm: 320 }), cell({ page: 4 }), cell({ page: 13, xMm: 240 })];
    expect(pagesFromGripper(cells)).toEqual([4, 13, 5]);
  });
});

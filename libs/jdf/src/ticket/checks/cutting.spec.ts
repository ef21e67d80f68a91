import { findingsIn, input, output, resource, ticket } from '../../../../../test/kit/small-ticket.js';

const sheet = resource('Component', 'ComponentType="Sheet" Dimensions="2000 1000 0"');
const found = (process: string, params: string) =>
  findingsIn(
    ticket(
      `Type="${process}"`,
      sheet + params,
      input('Component') + input(`${process}Params`) + output('Component'),
    ),
  ).filter((one) => one.includes('JDF_GEOMETRY'));
const block = (size: string, place: string, type = 'CutBlock') =>
  `<CutBlock BlockName="B" BlockType="${type}" BlockSize="${size}" BlockTrf="${place}"/>`;
const cut = (...blocks: string[]) => found('Cutting', resource('CuttingParams', '', blocks.join('')));
const at = (place: string) => [`warning JDF_GEOMETRY /JDF/ResourcePool/CuttingParams/${place}`];

// What must hold: JDF CutBlock BlockTrf, BlockSize; a matrix places a point as JDF's data type matrix says.
describe('blocks cut from a sheet', () => {
  const left = block('1000 1000', '1 0 0 1 0 0');

  it('may fill it, upright and turned', () => {
    expect(cut(left, block('1000 1000', '1 0 0 1 1000 0'))).toEqual([]);
    expect(cut(left, block('500 1000', '0 1 -1 0 2000 0'))).toEqual([]);
  });

  it('may not reach over it or lie on one another', () => {
    expect(cut(left, block('1000 1000', '1 0 0 1 1001 0'))).toEqual(at('CutBlock[2]'));
    expect(cut(left, block('500 1001', '0 1 -1 0 2000 0'))).toEqual(at('CutBlock[2]'));
    expect(cut(left, block('500 500', '0 1 -1 0 2001 0'))).toEqual(at('CutBlock[2]'));
  });

  it('may hold blocks where they are cut again', () => {
    expect(cut(block('2000 1000', '1 0 0 1 0 0', 'TempBlock'), left)).toEqual([]);
  });

  it('are placed by a matrix that leaves something of them', () => {
    expect(cut(block('10 10', '0 0 0 1 0 0'))).toEqual(at('CutBlock'));
  });

  it('are compared by neighbours only: a grid of thousands is sound, and one more is found', () => {
    const grid = Array.from({ length: 5000 }, (_, i) => {
      return block('20 20', `1 0 0 1 ${(i % 100) * 20} ${Math.floor(i / 100) * 20}`);
    });
    expect(cut(...grid)).toEqual([]);
    expect(cut(...grid, block('5 5', '1 0 0 1 1001 501'))).toEqual(at('CutBlock[5001]'));
  });
});

describe('a trim', () => {
  const trim = (size: string) => found('Trimming', resource('TrimmingParams', size));

  it('takes away, in either direction', () => {
    expect(trim('Width="1000" Height="2000"')).toEqual([]);
  });

  it('adds nothing', () => {
    expect(trim('Width="1001" Height="1001"')).toEqual([
      'warning JDF_GEOMETRY /JDF/ResourcePool/TrimmingParams',
    ]);
  });
});

import { LiveView } from './live-view.js';
import { printable } from './output.js';

function viewOn(isTerminal: boolean): { view: LiveView; said: () => string } {
  let said = '';
  const view = new LiveView({
    isTerminal,
    out: (text) => {
      said += `${text}\n`;
    },
    raw: (data) => {
      said += String(data);
    },
  });
  return { view, said: () => said };
}

describe('what people see of a live plant', () => {
  it('is a bar for each step that is worked on, drawn over the last one on a terminal', () => {
    const { view, said } = viewOn(true);
    view.step('t 1', {
      name: 'press-full print-1',
      status: 'InProgress',
      good: 100,
      planned: 400,
      unit: 'sheets',
    });
    view.line('began');
    view.step('t 1', { good: 200 });
    view.line(null);
    expect(said()).toBe(
      'began\n' +
        '  █████···············  25 %  press-full print-1 InProgress 100/400 sheets\n' +
        '\u001b[1A\u001b[J' +
        '  ██████████··········  50 %  press-full print-1 InProgress 200/400 sheets\n',
    );
  });

  it('loses the bar of a step that has ended', () => {
    const { view, said } = viewOn(true);
    view.step('t 1', { name: 'fold', planned: 10 });
    view.line(null);
    view.drop('t 1');
    view.line('done');
    expect(said().endsWith('\u001b[1A\u001b[Jdone\n')).toBe(true);
  });

  it('is lines only where it is written to a file', () => {
    const { view, said } = viewOn(false);
    view.step('t 1', { name: 'fold', planned: 10 });
    view.line('began');
    view.line(null);
    expect(said()).toBe('began\n');
  });
});

describe('text of strangers', () => {
  it('keeps its words, line ends and tabs, and loses what a terminal would obey', () => {
    expect(printable('Poster\tÄ4 „Salt“\n\u001b[2J\u009b31m\u0007\r')).toBe('Poster\tÄ4 „Salt“\n�[2J�31m��');
  });
});

/** Days of the Gregorian calendar, extended to all years before and after: Date ends where xs:date does not. */
export interface CalendarDay {
  readonly year: number;
  /** From 1. */
  readonly month: number;
  readonly day: number;
}

// Counted in eras of 400 years that begin on 1 March, so that the leap day comes last.
const ERA_DAYS = 146_097;
const DAYS_FROM_ERA_0_TO_1970 = 719_468;

/** Days from 1 January 1970; undefined for a day that does not exist. The year before 1 is -1: there is no year 0. */
export function daysSince1970({ year, month, day }: CalendarDay): number | undefined {
  if (year === 0 || month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return undefined;
  const y = month <= 2 ? year - 1 : year;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const leapDays = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return y * 365 + leapDays + dayOfYear - DAYS_FROM_ERA_0_TO_1970;
}

/** The other way round. */
export function calendarDay(daysFrom1970: number): CalendarDay {
  const days = daysFrom1970 + DAYS_FROM_ERA_0_TO_1970;
  const era = Math.floor(days / ERA_DAYS);
  const dayOfEra = days - era * ERA_DAYS;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
}

function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  if (month === 2) return leap ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Whether a version of the standard, if one is named, is older than another. */
export function isBefore(version: string | undefined, limit: string): boolean {
  if (version === undefined) return false;
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [limitMajor = 0, limitMinor = 0] = limit.split('.').map(Number);
  return major < limitMajor || (major === limitMajor && minor < limitMinor);
}

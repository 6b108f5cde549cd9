/**
 * Milliseconds of the processor that `run` takes: a guard against text that makes the program hang.
 * Time on the wall would fail a test because the machine has other work.
 */
export function processorMs(run: () => void): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** How long a task keeps the processor, in ms: a busy machine makes it wait, not spend. */
export function spent(task: () => unknown): number {
  const from = process.threadCpuUsage();
  task();
  const { user, system } = process.threadCpuUsage(from);
  return (user + system) / 1000;
}

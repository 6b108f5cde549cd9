/** Checks many files on all cores. */
import { availableParallelism } from 'node:os';
import { Tinypool } from 'tinypool';
import { standardInput } from './files.ts';
import work, { faultOfOurs, type Result, type Task } from './work.ts';

/** So few files are checked sooner than threads are started (measured: about 60 ms a thread). */
const tooFewForThreads = 3;

/**
 * The results in the order of the tasks, each as soon as those before it are there. At most a few
 * files a thread are under way or waiting, so that memory does not grow with their number.
 */
export async function* checkAll(tasks: readonly Task[]): AsyncGenerator<Result> {
  if (tasks.length <= tooFewForThreads) {
    for (const task of tasks) yield work(task);
    return;
  }
  const threads = Math.min(availableParallelism(), tasks.length);
  const pool = new Tinypool({
    filename: new URL('./work.js', import.meta.url).href,
    minThreads: threads,
    maxThreads: threads,
  });
  try {
    // Threads have no standard input of their own.
    yield* inOrder(tasks, threads * 4, (task) =>
      task.file === standardInput ? work(task) : runIn(pool, task),
    );
  } finally {
    await pool.destroy();
  }
}

/** A thread that dies, say for want of memory, takes only its own file with it. */
async function runIn(pool: Tinypool, task: Task): Promise<Result> {
  try {
    return await pool.run(task);
  } catch (error) {
    return { file: task.file, why: faultOfOurs(error) };
  }
}

async function* inOrder<A, B>(
  items: readonly A[],
  most: number,
  start: (item: A) => Promise<B>,
): AsyncGenerator<B> {
  const underWay: Promise<B>[] = [];
  for (const item of items) {
    underWay.push(start(item));
    const first = underWay.length >= most ? underWay.shift() : undefined;
    if (first !== undefined) yield await first;
  }
  for (const rest of underWay) yield await rest;
}

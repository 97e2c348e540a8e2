/** The seven tasks, in the order of the work: name in the address, words on the screen. */
export const tasks = {
  appraise: 'Appraise',
  record: 'Record',
  scale: 'Scale',
  order: 'Order',
  string: 'String',
  settle: 'Settle',
  'hand-over': 'Hand over',
} as const;
export type TaskName = keyof typeof tasks;
export const taskNames = Object.keys(tasks) as TaskName[];

/** Where in the program somebody is. */
export type Route =
  | { readonly place: 'jobs' }
  | { readonly place: 'settings' }
  | { readonly place: 'job'; readonly job: string; readonly task: TaskName; readonly part?: string }
  | { readonly place: 'nowhere'; readonly hash: string };

/** The place that an address names. Anything it does not know is nowhere, and says so. */
export function readRoute(hash: string): Route {
  const [first, second, third, fourth] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decode);
  if (first === undefined || first === '') return { place: 'jobs' };
  if (first === 'settings' && second === undefined) return { place: 'settings' };
  if (first === 'job' && second) {
    const task = third === undefined || third === '' ? 'record' : third;
    if (task in tasks) {
      const route = { place: 'job', job: second, task: task as TaskName } as const;
      return fourth ? { ...route, part: fourth } : route;
    }
  }
  return { place: 'nowhere', hash };
}

/** The address of a place. */
export function hashOf(route: Route): string {
  switch (route.place) {
    case 'jobs':
      return '#/';
    case 'settings':
      return '#/settings';
    case 'job': {
      const part = route.part === undefined ? '' : `/${encodeURIComponent(route.part)}`;
      return `#/job/${encodeURIComponent(route.job)}/${route.task}${part}`;
    }
    case 'nowhere':
      return route.hash;
  }
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

// Measures how long a drag waits for its answer, alone and while whole assessments are made for another tab.
// By hand: start a Release build of the service, then
//   node tests/drag-latency.mjs http://127.0.0.1:5081 [template] [drags]
const [address = 'http://127.0.0.1:5081', template = 'open-sided-marquee', count = '15'] = process.argv.slice(2);
const pauseMs = 1500;
const plan = await (await fetch(`${address}/api/templates/${template}`)).json();
const [x, y] = plan.engines[0].place;

const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

// Every drag moves the engine, so that no answer is one given before.
function ask(detail, tab, step) {
  plan.engines[0].place = [x + (step % 100) / 100, y];
  return fetch(`${address}/api/assessments?detail=${detail}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'ShowSafety-Tab': tab },
    body: JSON.stringify(plan),
  });
}

async function drags(pause) {
  const times = [];
  for (let step = 0; step < Number(count); step++) {
    const from = performance.now();
    const answer = await ask('drag', 'measured', step);
    await answer.arrayBuffer();
    if (!answer.ok) throw new Error(`A drag was answered with ${answer.status}.`);
    times.push(performance.now() - from);
    await wait(pause);
  }
  return times.sort((a, b) => a - b);
}

async function meanwhile(work) {
  let goes = true;
  let made = 0;
  const statuses = [];
  const background = (async () => {
    for (let step = 50; goes; step++) {
      const answer = await ask('full', 'other', step);
      await answer.arrayBuffer();
      if (answer.ok) made++;
      else statuses.push(answer.status);
    }
  })();
  await wait(500);
  const times = await work();
  const madeMeanwhile = made;
  goes = false;
  await background;
  return { times, made: madeMeanwhile, statuses };
}

const share = (times, part) => times[Math.min(times.length - 1, Math.floor(part * times.length))].toFixed(0);
const say = (what, times, more = '') =>
  console.log(`${what}: p50 ${share(times, 0.5)} ms, p95 ${share(times, 0.95)} ms, longest ${times.at(-1).toFixed(0)} ms${more}`);

await drags(0);
say('One after the other, alone', await drags(0));
const dense = await meanwhile(() => drags(0));
say('One after the other, whole assessments waiting', dense.times, `; ${dense.made} made meanwhile`);
say('With pauses, alone', await drags(pauseMs));
const sparse = await meanwhile(() => drags(pauseMs));
say('With pauses, whole assessments under way', sparse.times, `; ${sparse.made} made meanwhile`);
const refused = [...dense.statuses, ...sparse.statuses];
if (refused.length > 0) console.log(`Whole assessments not answered with 200: ${refused.join(', ')}`);

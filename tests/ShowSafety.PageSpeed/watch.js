// Runs in the page before its own scripts. Notes when a finger moved, when an assessment was asked for, when it came, and
// when the page said it had drawn it. Times are those of performance.now().
(() => {
  const moves = [];
  const answers = [];
  let open = [];
  let lastMove = null;
  addEventListener(
    'pointermove',
    (event) => {
      if (event.buttons === 1) {
        lastMove = event.timeStamp;
        moves.push(event.timeStamp);
      }
    },
    { capture: true },
  );
  const fetched = window.fetch;
  window.fetch = async (input, init) => {
    const address = String(input instanceof Request ? input.url : input);
    if (!address.includes('/api/assessments') || lastMove === null) {
      return fetched(input, init);
    }
    const answer = { moved: lastMove, asked: performance.now() };
    const response = await fetched(input, init);
    answer.came = performance.now();
    answer.service = response.headers.get('Server-Timing') ?? '';
    answer.bytes = Number(response.headers.get('Content-Length') ?? 0);
    answer.detail = new URL(address, location.href).searchParams.get('detail');
    open.push(answer);
    return response;
  };
  new PerformanceObserver((list) => {
    for (const mark of list.getEntriesByName('showsafety:drawn')) {
      for (const answer of open.filter((a) => a.came <= mark.startTime)) {
        answers.push({ ...answer, drawn: mark.startTime });
      }
      open = open.filter((a) => a.came > mark.startTime);
    }
  }).observe({ type: 'mark' });
  window.dragTimes = {
    start() {
      lastMove = null;
      moves.length = 0;
      answers.length = 0;
      open = [];
    },
    read: () => ({ moves: [...moves], answers: [...answers] }),
  };
})();

import { describe, expect, it } from 'vitest';
import { type Ask, askHealth, healthInWords } from './health';

function answering(status: number, body: unknown): Ask {
  return async () => ({ ok: status < 400, status, json: async () => body });
}

describe('askHealth', () => {
  it('reads status and version from the address of the health feature', async () => {
    const asked: string[] = [];
    const health = await askHealth(async (address) => {
      asked.push(address);
      return { ok: true, status: 200, json: async () => ({ status: 'healthy', version: '1.2.3' }) };
    });

    expect(asked).toEqual(['/health']);
    expect(health).toEqual({ kind: 'answering', status: 'healthy', version: '1.2.3' });
  });

  it('says what came back when the service answers with a failure', async () => {
    const health = await askHealth(answering(503, null));

    expect(health).toEqual({ kind: 'silent', reason: 'it answered with status 503' });
  });

  it.each([[null], ['healthy'], [{ status: 'healthy' }], [{ status: 'healthy', version: 1 }]])(
    'never takes %j for good health',
    async (body) => {
      expect((await askHealth(answering(200, body))).kind).toBe('silent');
    },
  );

  it('does not throw when nothing listens or the answer is not JSON', async () => {
    const noListener: Ask = () => Promise.reject(new TypeError('no connection'));
    const noJson: Ask = async () => ({
      ok: true,
      status: 200,
      json: () => Promise.reject(new SyntaxError('not JSON')),
    });

    expect((await askHealth(noListener)).kind).toBe('silent');
    expect((await askHealth(noJson)).kind).toBe('silent');
  });
});

describe('healthInWords', () => {
  it('names the version of a running service', () => {
    expect(healthInWords({ kind: 'answering', status: 'healthy', version: '1.2.3' })).toBe(
      'The service is running (version 1.2.3).',
    );
  });

  it('does not call a service running that reports anything else', () => {
    expect(healthInWords({ kind: 'answering', status: 'degraded', version: '1.2.3' })).not.toContain(
      'is running',
    );
  });

  it('gives the reason and the next step when the service is silent', () => {
    const words = healthInWords({ kind: 'silent', reason: 'it cannot be reached' });

    expect(words).toContain('it cannot be reached');
    expect(words).toContain('Start it again');
  });
});

import { headlineParts } from './headlineParts';

/** The service's sentence. NOT TO RUN is told by its words and by ink turned over, never by hue. */
export function Band({ headline, example }: { readonly headline: string; readonly example: boolean }) {
  const { verdict, rest } = headlineParts(headline);
  return (
    <p class="sentence">
      {example && <span class="stamp">EXAMPLE</span>}
      <strong class="verdict">
        {verdict}
        {rest !== '' && <span class="unseen">: </span>}
      </strong>
      {rest !== '' && <span class="rest">{rest}</span>}
    </p>
  );
}

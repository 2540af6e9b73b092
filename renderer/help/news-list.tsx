export interface NewsListProps {
  readonly news: readonly { readonly version: string; readonly points: readonly string[] }[];
}

/** What each version brought, newest first. */
export function NewsList({ news }: NewsListProps) {
  return (
    <div className="news">
      {news.map(({ version, points }) => (
        <section key={version} aria-label={`Version ${version}`}>
          <h3>Version {version}</h3>
          <ul>
            {points.map((point) => (
              <li key={point}>{point}</li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

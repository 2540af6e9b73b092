/** Which side is heard: both cards show a picture, and only one of them speaks. */
export function PlayingSign({ playing, letter }: { readonly playing: boolean; readonly letter: string }) {
  return (
    <span role="status" className="side-playing">
      {playing ? (
        <>
          <span aria-hidden="true">▶</span> playing<span className="visually-hidden"> side {letter}</span>
        </>
      ) : null}
    </span>
  );
}

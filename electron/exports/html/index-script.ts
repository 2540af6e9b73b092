/** Jumps in the video beside the page, and back to the line that was read; where it is not there, the person can open it, and nothing leaves the machine. */
export const indexScript = `
(() => {
  const video = document.querySelector("video");
  const opener = document.querySelector(".open-video");
  const status = document.querySelector("[role=status]");
  if (!video) return;
  const missing = () => { opener.hidden = false; video.hidden = true; };
  video.addEventListener("error", missing);
  if (video.error || !video.getAttribute("src")) missing();
  let wanted = null;
  let left = null;
  const back = document.querySelector(".back");
  const backButton = back.querySelector("button");
  backButton.addEventListener("click", () => {
    back.hidden = true;
    left.scrollIntoView({ block: "center" });
    left.focus({ preventScroll: true });
  });
  const play = (seconds) => { video.currentTime = seconds; video.play().catch(() => {}); };
  document.querySelector("input[type=file]").addEventListener("change", (event) => {
    const file = event.target.files[0];
    if (!file) return;
    video.hidden = false;
    opener.hidden = true;
    video.src = URL.createObjectURL(file);
    if (wanted !== null) play(wanted);
    wanted = null;
  });
  document.addEventListener("click", (event) => {
    const button = event.target.closest("button.jump");
    if (!button) return;
    const seconds = Number(button.dataset.at);
    if (video.hidden) {
      wanted = seconds;
      status.textContent = "Open the video file first; then the times jump in it.";
      opener.scrollIntoView({ block: "nearest" });
      opener.querySelector("input").focus();
      return;
    }
    play(seconds);
    const { top, bottom } = video.getBoundingClientRect();
    if (top < 0 || bottom > window.innerHeight) {
      left = button;
      backButton.textContent = "Back to where you read " + button.textContent.trim();
      back.hidden = false;
      video.scrollIntoView({ block: "nearest" });
    }
    status.textContent = "Playing from " + button.textContent.trim();
  });
  const chapters = [...document.querySelectorAll(".chapters button.jump")];
  video.addEventListener("timeupdate", () => {
    let here = null;
    for (const button of chapters) if (Number(button.dataset.at) <= video.currentTime + 0.05) here = button;
    for (const button of chapters) button === here ? button.setAttribute("aria-current", "true") : button.removeAttribute("aria-current");
  });
})();
`;

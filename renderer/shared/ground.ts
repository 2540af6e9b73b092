import { useState } from "react";

export const grounds = ["system", "light", "dark"] as const;
export type Ground = (typeof grounds)[number];

const setting = "roundwalk.ground";

function storedGround(): Ground {
  const stored = localStorage.getItem(setting);
  return stored === "light" || stored === "dark" ? stored : "system";
}

/** Before the first paint, so that a dark room sees no white flash. */
export function applyStoredGround(): void {
  applyGround(storedGround());
}

function applyGround(ground: Ground): void {
  if (ground === "system") delete document.documentElement.dataset.ground;
  else document.documentElement.dataset.ground = ground;
}

export function useGround(): [Ground, (ground: Ground) => void] {
  const [ground, setGround] = useState(storedGround);
  return [
    ground,
    (next) => {
      localStorage.setItem(setting, next);
      applyGround(next);
      setGround(next);
    },
  ];
}

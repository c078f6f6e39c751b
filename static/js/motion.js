// Plays a picture as a loop of the frames that the server draws from the same poses. A picture that can move carries the
// address of its frames; without script, or where motion is unwanted, it stays as printed.
(function () {
  "use strict";

  const SVG = "http://www.w3.org/2000/svg";
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");

  // Slow at both ends, as limbs are.
  const ease = (t) => (1 - Math.cos(Math.PI * t)) / 2;

  // Where the loop is after so many seconds: which frame, and what the breath does.
  function at(film, seconds) {
    const way = film.going + film.hold + film.coming;
    const pass = Math.floor(seconds / way) % film.passes.length;
    const t = seconds % way;
    const last = film.passes[pass].length - 1;
    if (t < film.going) {
      return { pass, frame: Math.round(last * ease(t / film.going)), breath: film.breath === "going" ? "out" : "in" };
    }
    if (t < film.going + film.hold) {
      return { pass, frame: last, breath: "" };
    }
    const back = (t - film.going - film.hold) / film.coming;
    return {
      pass,
      frame: Math.round(film.round ? last : last * (1 - ease(back))),
      breath: film.breath === "coming" ? "out" : "in",
    };
  }

  function shape(mark) {
    const path = document.createElementNS(SVG, "path");
    path.setAttribute("d", mark.d);
    path.setAttribute("class", mark.c);
    if (mark.w) {
      path.setAttribute("stroke-width", mark.w);
    }
    return path;
  }

  function drawn(film) {
    return film.passes.map((frames) =>
      frames.map((frame) => {
        const group = document.createElementNS(SVG, "g");
        frame.forEach((mark) => group.append(shape(mark)));
        return group;
      }),
    );
  }

  function stage(film, label) {
    const svg = document.createElementNS(SVG, "svg");
    svg.setAttribute("viewBox", film.box.join(" "));
    svg.setAttribute("class", "figure figure--moving");
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", label);
    return svg;
  }

  const BREATHS = { out: "Breathe out", in: "Breathe in", "": "Hold" };

  function words(film, breath) {
    return film.breath === "steady" ? "Breathe easily" : BREATHS[breath];
  }

  class Player {
    constructor(box, button) {
      this.box = box;
      this.button = button;
      this.says = button.textContent;
      this.running = false;
    }

    async start() {
      const answer = await fetch(this.box.dataset.motion, { headers: { Accept: "application/json" } });
      if (!answer.ok) {
        this.button.textContent = "The moving picture cannot be shown now";
        return;
      }
      this.film = await answer.json();
      this.groups = drawn(this.film);
      this.svg = stage(this.film, this.box.dataset.label);
      this.breath = document.createElement("p");
      this.breath.className = "breath";
      this.breath.setAttribute("aria-hidden", "true");
      this.place = document.createElement("div");
      this.place.className = "moving";
      this.place.append(this.svg, this.breath);
      this.box.querySelector(".picture").hidden = true;
      this.box.prepend(this.place);
      this.button.textContent = "Stop";
      this.button.setAttribute("aria-pressed", "true");
      this.running = true;
      this.since = null;
      requestAnimationFrame((now) => this.show(now));
    }

    show(now) {
      if (!this.running) {
        return;
      }
      this.since = this.since ?? now;
      const here = at(this.film, (now - this.since) / 1000);
      this.svg.replaceChildren(this.groups[here.pass][here.frame]);
      const said = words(this.film, here.breath);
      if (this.breath.textContent !== said) {
        this.breath.textContent = said;
        this.breath.classList.toggle("breath--out", said === BREATHS.out);
      }
      requestAnimationFrame((next) => this.show(next));
    }

    stop() {
      this.running = false;
      this.place.remove();
      this.box.querySelector(".picture").hidden = false;
      this.button.textContent = this.says;
      this.button.setAttribute("aria-pressed", "false");
    }
  }

  function offer(box) {
    const button = box.querySelector("button[data-moves]");
    if (!button || button.dataset.ready) {
      return;
    }
    const player = new Player(box, button);
    button.dataset.ready = "yes";
    button.hidden = still.matches;
    button.addEventListener("click", () => (player.running ? player.stop() : player.start()));
    still.addEventListener("change", () => {
      button.hidden = still.matches;
      if (still.matches && player.running) {
        player.stop();
      }
    });
  }

  const offerAll = () => document.querySelectorAll("[data-motion]").forEach(offer);
  document.addEventListener("DOMContentLoaded", offerAll);
  document.addEventListener("htmx:afterSettle", offerAll);
})();

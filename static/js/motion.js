// Plays a picture as a loop of the frames that the server draws from the same poses. A picture that can move carries the
// address of its frames; without script, or where motion is unwanted, it stays as printed.
(function () {
  "use strict";

  const SVG = "http://www.w3.org/2000/svg";
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");

  // Slow at both ends, as limbs are.
  const ease = (t) => (1 - Math.cos(Math.PI * t)) / 2;

  // Where the loop is after so many seconds: which pass, which frame, and whether the breath goes out.
  function at(film, seconds) {
    const way = film.going + film.hold + film.coming;
    const pass = Math.floor(seconds / way) % film.passes.length;
    const t = seconds % way;
    const out = film.out.some(([from, to]) => t >= from && t < to);
    return { pass, frame: Math.round((film.passes[pass].length - 1) * share(film, t)), out };
  }

  // How much of the way is done at this moment of the loop, 0 to 1.
  function share(film, t) {
    if (t < film.going) {
      return ease(t / film.going);
    }
    return t < film.going + film.hold || film.coming === 0 ? 1 : 1 - ease((t - film.going - film.hold) / film.coming);
  }

  function shape(mark) {
    const drawn = document.createElementNS(SVG, mark.w ? "polyline" : "polygon");
    drawn.setAttribute("points", mark.p);
    drawn.setAttribute("class", mark.c);
    if (mark.w) {
      drawn.setAttribute("stroke-width", mark.w);
    }
    return drawn;
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
    svg.setAttribute("width", film.box[2]);
    svg.setAttribute("height", film.box[3]);
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", label);
    return svg;
  }

  const words = (film, out) => (film.out.length === 0 ? "Breathe easily" : out ? "Breathe out" : "Breathe in");

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
      this.place.className = "picture moving " + this.film.style;
      this.place.append(this.svg, this.breath);
      this.still = this.box.querySelector(".picture");
      this.still.hidden = true;
      this.still.before(this.place);
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
      const said = words(this.film, here.out);
      if (this.breath.textContent !== said) {
        this.breath.textContent = said;
        this.breath.classList.toggle("breath-out", here.out);
      }
      requestAnimationFrame((next) => this.show(next));
    }

    stop() {
      this.running = false;
      this.place.remove();
      this.still.hidden = false;
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

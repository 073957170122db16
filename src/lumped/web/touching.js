// A picture made by Lumped itself, whose places can be touched: a row of amounts, or a triangle of three.
const STEP = 0.02;

export default {
  template: `<figure class="touching" role="slider" tabindex="0" :aria-label="label" :aria-valuetext="said" aria-valuemin="0" aria-valuemax="100" :aria-valuenow="now"
    @pointerdown="press" @pointermove="drag" @keydown="key"></figure>`,
  props: { day: String, night: String, label: String, said: String, begin: Array },
  data: () => ({ now: 0 }),
  mounted() {
    this.dark = window.matchMedia("(prefers-color-scheme: dark)");
    this.dark.addEventListener("change", this.draw);
    this.at = [...this.begin];
    this.draw();
  },
  unmounted() {
    this.dark.removeEventListener("change", this.draw);
  },
  watch: {
    day() { this.at = [...this.begin]; this.draw(); },
    night() { this.draw(); },
  },
  methods: {
    draw() {
      this.$el.innerHTML = (this.dark.matches ? this.night : this.day) || "";
      this.svg = this.$el.querySelector("svg");
      if (!this.svg) return;
      this.svg.removeAttribute("width");
      this.svg.removeAttribute("height");
      this.svg.setAttribute("aria-hidden", "true");
      this.mark();
    },
    // Corners of the triangle, or the two ends of the row, in the picture's own millimetres.
    frame() {
      const triangle = this.svg.querySelector("[data-frame]");
      if (triangle) {
        const numbers = triangle.getAttribute("d").match(/-?[\d.]+/g).map(Number);
        return [[numbers[0], numbers[1]], [numbers[2], numbers[3]], [numbers[4], numbers[5]]];
      }
      const strips = [...this.svg.querySelectorAll("clipPath rect")].map((each) =>
        ["x", "y", "width", "height"].map((name) => Number(each.getAttribute(name))));
      const top = Math.min(...strips.map((each) => each[1])), end = Math.max(...strips.map((each) => each[1] + each[3]));
      return [[strips[0][0], top], [strips[0][0] + strips[0][2], end]];
    },
    where(event) {
      const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(this.svg.getScreenCTM().inverse());
      const f = this.frame();
      if (f.length === 2) return [(point.x - f[0][0]) / (f[1][0] - f[0][0])];
      const area = (p, q, r) => (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
      const whole = area(f[0], f[1], f[2]), p = [point.x, point.y];
      return [area(p, f[1], f[2]) / whole, area(f[0], p, f[2]) / whole, area(f[0], f[1], p) / whole];
    },
    kept(parts) {
      const inside = parts.map((each) => Math.min(Math.max(each, 0), 1));
      if (inside.length === 1) return inside;
      const sum = inside.reduce((a, b) => a + b, 0) || 1;
      return inside.map((each) => each / sum);
    },
    go(parts) {
      this.at = this.kept(parts);
      this.mark();
      this.$emit("place", this.at);
    },
    mark() {
      if (!this.svg || !this.at.length) return;
      this.now = Math.round(100 * this.at[0]);
      this.svg.querySelector(".touched-here")?.remove();
      const f = this.frame(), ns = "http://www.w3.org/2000/svg";
      const group = document.createElementNS(ns, "g");
      group.setAttribute("class", "touched-here");
      if (f.length === 2) {
        const line = document.createElementNS(ns, "line"), x = f[0][0] + this.at[0] * (f[1][0] - f[0][0]);
        for (const [name, value] of Object.entries({ x1: x, x2: x, y1: f[0][1], y2: f[1][1] })) line.setAttribute(name, value);
        group.append(line);
      } else {
        const dot = document.createElementNS(ns, "circle");
        dot.setAttribute("cx", this.at.reduce((sum, each, k) => sum + each * f[k][0], 0));
        dot.setAttribute("cy", this.at.reduce((sum, each, k) => sum + each * f[k][1], 0));
        dot.setAttribute("r", 2.6);
        group.append(dot);
      }
      this.svg.append(group);
    },
    press(event) {
      if (!this.svg) return;
      this.$el.setPointerCapture?.(event.pointerId);
      this.go(this.where(event));
    },
    drag(event) {
      if (this.svg && event.buttons) this.go(this.where(event));
    },
    key(event) {
      const a = this.at, ways = a.length === 1
        ? { ArrowRight: [STEP], ArrowUp: [STEP], ArrowLeft: [-STEP], ArrowDown: [-STEP] }
        : { ArrowUp: [STEP, -STEP / 2, -STEP / 2], ArrowDown: [-STEP, STEP / 2, STEP / 2],
            ArrowLeft: [0, STEP, -STEP], ArrowRight: [0, -STEP, STEP] };
      const step = ways[event.key];
      if (!step || !this.svg) return;
      event.preventDefault();
      this.go(a.map((each, k) => each + step[k]));
    },
  },
};

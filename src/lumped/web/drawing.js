// A drawing made by Lumped itself, by day or in the evening; its parts can be touched.
let drawings = 0;

// Names inside one drawing must not meet those of another on the same page.
function apart(svg, own) {
  return svg
    .replace(/(<[^>]*\s)id="([^"]+)"/g, `$1id="${own}-$2"`)
    .replace(/url\(#([^)]+)\)/g, `url(#${own}-$1)`)
    .replace(/href="#([^"]+)"/g, `href="#${own}-$1"`);
}

export default {
  template: `<figure class="drawing" role="img" :aria-label="label" @click="touch" @pointerover="read" @pointerleave="forget"></figure>`,
  props: { day: String, night: String, label: String },
  mounted() {
    this.own = `d${++drawings}`;
    this.dark = window.matchMedia("(prefers-color-scheme: dark)");
    this.dark.addEventListener("change", this.draw);
    this.draw();
  },
  unmounted() {
    this.dark.removeEventListener("change", this.draw);
  },
  watch: {
    day() { this.draw(); },
    night() { this.draw(); },
  },
  methods: {
    draw() {
      this.$el.innerHTML = apart((this.dark.matches ? this.night : this.day) || "", this.own);
      const svg = this.$el.querySelector("svg");
      if (!svg) return;
      svg.removeAttribute("width");
      svg.removeAttribute("height");
      svg.setAttribute("preserveAspectRatio", this.$el.closest(".mat") ? "xMinYMax meet" : "xMinYMin meet");
      svg.setAttribute("aria-hidden", "true");
    },
    read(event) {
      this.forget();
      const line = event.target.closest("[data-volts]");
      if (!line) return;
      this.slip = document.createElement("output");
      this.slip.className = "volts-slip";
      this.slip.textContent = `${Number(line.dataset.volts).toFixed(2)} V`;
      const around = this.$el.getBoundingClientRect();
      this.slip.style.left = `${event.clientX - around.left}px`;
      this.slip.style.top = `${event.clientY - around.top}px`;
      this.$el.append(this.slip);
    },
    forget() {
      this.slip?.remove();
    },
    touch(event) {
      this.read(event);
      const part = event.target.closest("[data-part]");
      if (part) this.$emit("part", part.getAttribute("data-part"));
    },
  },
};

// What is long: open on a desk, folded on a phone until somebody opens it, and unfolded when it is printed.
const chosen = new Map();

export default {
  template: `<details class="fold" :open="open" @toggle="toggled"><summary><slot name="summary"></slot></summary><slot></slot></details>`,
  props: { name: String },
  data: () => ({ open: true }),
  created() {
    this.open = chosen.get(this.name) ?? !window.matchMedia("(max-width: 60rem)").matches;
  },
  mounted() {
    window.addEventListener("beforeprint", this.unfold);
  },
  unmounted() {
    window.removeEventListener("beforeprint", this.unfold);
  },
  methods: {
    toggled(event) {
      if (event.target !== this.$el || event.target.open === this.open) return;
      this.open = event.target.open;
      chosen.set(this.name, this.open);
    },
    unfold() {
      this.open = this.$el.open = true;
    },
  },
};

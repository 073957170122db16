// The sculpture as a thing that turns: lumps in their dough, legs and bodies of parts; from above at first.
import { THREE } from "nicegui-scene";

const STEEL = "#b9b4ac", RED = "#b8402f", BLACK = "#2d2a2b", CASE = "#6f7f79";
const LAMP = { "lamp-red": "#e2402c", "lamp-yellow": "#f2b91d", "lamp-green": "#2f9a5f", "lamp-blue": "#3f7fd6", "lamp-white": "#fff6d8" };
const GLOW = { dark: 0, "barely-lit": 0.15, dim: 0.45, bright: 1.0, "too-hot": 1.2 };

function unpacked(text, Kind) {
  const bytes = Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
  return new Kind(bytes.buffer);
}

export default {
  template: `<div class="turntable" tabindex="0" role="application" :aria-label="label"
    @pointerdown="grip" @pointermove="turn" @pointerup="let_go" @pointercancel="let_go" @keydown="key"></div>`,
  props: { label: String },
  mounted() {
    this.dark = window.matchMedia("(prefers-color-scheme: dark)");
    this.dark.addEventListener("change", this.show_again);
    this.azimuth = 0;
    this.tilt = 0.02;
    try {
      this.renderer = new THREE.WebGLRenderer({ alpha: true, antialias: true, preserveDrawingBuffer: true });
    } catch {
      this.$emit("flat");
      return;
    }
    this.renderer.shadowMap.enabled = true;
    this.renderer.shadowMap.type = THREE.PCFSoftShadowMap;
    this.renderer.setPixelRatio(Math.min(window.devicePixelRatio || 1, 2));
    this.$el.append(this.renderer.domElement);
    this.camera = new THREE.PerspectiveCamera(24, 1, 1, 5000);
    this.camera.up.set(0, 0, 1);
    this.scene = new THREE.Scene();
    this.scene.add(new THREE.HemisphereLight("#fff4e2", "#a98c6c", 2.3));
    this.sun = new THREE.DirectionalLight("#fff1dc", 1.7);
    this.sun.castShadow = true;
    this.sun.shadow.mapSize.set(2048, 2048);
    this.sun.shadow.radius = 6;
    this.scene.add(this.sun, this.sun.target);
    this.table = new THREE.Mesh(new THREE.PlaneGeometry(4000, 4000), new THREE.ShadowMaterial({ opacity: 0.28 }));
    this.table.receiveShadow = true;
    this.things = new THREE.Group();
    this.scene.add(this.table, this.things);
    this.watcher = new ResizeObserver(() => this.fit());
    this.watcher.observe(this.$el);
    this.$emit("ready");
  },
  unmounted() {
    this.dark.removeEventListener("change", this.show_again);
    this.watcher?.disconnect();
    this.clear();
    this.renderer?.dispose();
  },
  methods: {
    show_again() {
      if (this.content) this.show(this.content);
    },
    clear() {
      this.things?.traverse((each) => { each.geometry?.dispose(); each.material?.dispose(); });
      this.things?.clear();
    },
    show(content) {
      if (!this.renderer) return;
      this.clear();
      this.content = content;
      content.lumps.forEach((lump) => this.add_lump(lump));
      this.box = new THREE.Box3().setFromObject(this.things);
      this.add_cloth(content.cloth);
      content.parts.forEach((part) => this.add_part(part));
      this.frame();
    },
    add(shape, colour, looks = {}) {
      const mesh = new THREE.Mesh(shape, new THREE.MeshStandardMaterial({ color: colour, roughness: 0.6, ...looks }));
      mesh.castShadow = mesh.receiveShadow = true;
      this.things.add(mesh);
      return mesh;
    },
    add_lump(lump) {
      const shape = new THREE.BufferGeometry();
      shape.setAttribute("position", new THREE.BufferAttribute(unpacked(lump.points, Float32Array), 3));
      shape.setIndex(new THREE.BufferAttribute(unpacked(lump.faces, Uint32Array), 1));
      shape.computeVertexNormals();
      this.add(shape, lump.colour, { roughness: 0.92 });
    },
    add_cloth(cloth) {
      const [width, depth] = cloth.size, round = 4, x = -width / 2, y = -depth / 2;
      const edge = new THREE.Shape().moveTo(x + round, y).lineTo(-x - round, y).quadraticCurveTo(-x, y, -x, y + round)
        .lineTo(-x, -y - round).quadraticCurveTo(-x, -y, -x - round, -y).lineTo(x + round, -y)
        .quadraticCurveTo(x, -y, x, -y - round).lineTo(x, y + round).quadraticCurveTo(x, y, x + round, y);
      const mesh = this.add(new THREE.ShapeGeometry(edge).translate(...cloth.middle, -0.05),
        cloth.colours[this.dark.matches ? "dark" : "light"], { roughness: 1 });
      mesh.castShadow = false;
    },
    add_tube(points, radius, colour, looks = {}) {
      const curve = points.length > 2 ? new THREE.CatmullRomCurve3(points, false, "centripetal") : new THREE.LineCurve3(...points);
      this.add(new THREE.TubeGeometry(curve, Math.max(12, points.length * 3), radius, 10), colour, looks);
    },
    add_part(part) {
      const body = { lamp: this.add_lamp, motor: this.add_motor, pack: this.add_pack }[part.kind] || this.add_small;
      body.call(this, part);
      part.wires.forEach((wire) => this.add_wire(wire, part));
    },
    add_wire(wire, part) {
      const colour = { red: RED, black: BLACK }[wire.leg] || STEEL;
      const hidden = wire.hidden.map((point) => new THREE.Vector3(...point));
      if (hidden.length) {
        const out = hidden[0].clone().addScaledVector(hidden[0].clone().sub(hidden[1]).normalize(), 2.5);
        this.add_tube([hidden[1], out], Math.max(wire.radius, 0.4), STEEL, { metalness: 0.3, roughness: 0.4 });
      }
      if (part.kind === "lamp") return;
      const every = Math.max(1, Math.floor(wire.lies.length / 24));
      const way = wire.lies.filter((_, k) => k % every === 0 || k === wire.lies.length - 1);
      this.add_tube(way.map((point) => new THREE.Vector3(...point)), 1.0, colour);
    },
    add_lamp(part) {
      const colour = LAMP[part.key] || "#e2402c", glow = GLOW[part.state] || 0;
      const [x, y] = part.centre, legs = part.wires.filter((wire) => wire.hidden.length);
      const top = Math.max(part.centre[2], ...legs.map((wire) => wire.hidden[0][2])) + 6;
      legs.forEach((wire) => {
        const entry = new THREE.Vector3(...wire.hidden[0]), away = new THREE.Vector3(entry.x - x, entry.y - y, 0).normalize();
        const foot = new THREE.Vector3(x, y, top).addScaledVector(away, 1.27);
        const knee = new THREE.Vector3(entry.x, entry.y, Math.max(entry.z + 2, top - 1.5));
        this.add_tube([entry, knee, foot], 0.4, STEEL, { metalness: 0.3, roughness: 0.4 });
      });
      const looks = { roughness: 0.25, transparent: true, opacity: 0.92, emissive: colour, emissiveIntensity: glow };
      this.add(new THREE.CylinderGeometry(2.9, 2.9, 1.2, 32).rotateX(Math.PI / 2).translate(x, y, top), colour, looks);
      this.add(new THREE.CapsuleGeometry(2.5, 4.5, 8, 32).rotateX(Math.PI / 2).translate(x, y, top + 3), colour, looks);
      if (glow > 0.1) {
        const light = new THREE.PointLight(colour, 240 * glow, 80, 1.6);
        light.position.set(x, y, top + 9);
        this.things.add(light);
      }
    },
    place(mesh, part, height) {
      mesh.rotation.z = part.turn;
      mesh.position.set(part.centre[0], part.centre[1], part.centre[2] + height);
      return mesh;
    },
    add_motor(part) {
      const [long, wide] = part.size, radius = wide / 2;
      this.place(this.add(new THREE.CylinderGeometry(radius, radius, long * 0.8, 32).rotateZ(Math.PI / 2), CASE, { roughness: 0.5 }), part, radius);
      this.place(this.add(new THREE.CylinderGeometry(1, 1, long * 1.1, 12).rotateZ(Math.PI / 2), STEEL), part, radius);
    },
    add_pack(part) {
      const [long, wide] = part.size, high = 13;
      this.place(this.add(new THREE.BoxGeometry(long, wide, high), CASE, { roughness: 0.8 }), part, high / 2);
      const count = Number(/\d/.exec(part.key)?.[0] || 2), step = long / (count + 0.4);
      for (let k = 0; k < count; k++) {
        const along = (k - (count - 1) / 2) * step;
        this.place(this.add(new THREE.CapsuleGeometry(step * 0.4, wide * 0.62, 6, 20).translate(along, 0, 0), "#c3cbc7", { roughness: 0.4 }), part, high - 1);
      }
    },
    add_small(part) {
      const [long, wide] = part.size;
      this.place(this.add(new THREE.BoxGeometry(long, wide, 5), CASE), part, 2.5);
    },
    frame() {
      const [width, depth] = this.content.cloth.size, [x, y] = this.content.cloth.middle;
      const high = this.box.max.z;
      this.centre = new THREE.Vector3(x, y, high / 4);
      this.reach = Math.hypot(width, depth, high) / 2;
      this.wide = width / 2;
      this.deep = Math.max(depth / 2, high * 0.75);
      this.sun.position.copy(this.centre).add(new THREE.Vector3(-0.6, 0.7, 1.6).multiplyScalar(this.reach * 2));
      this.sun.target.position.copy(this.centre);
      const area = this.sun.shadow.camera;
      area.left = area.bottom = -this.reach * 1.5;
      area.right = area.top = this.reach * 1.5;
      area.far = this.reach * 8;
      area.updateProjectionMatrix();
      this.fit();
    },
    fit() {
      if (!this.box || !this.$el.clientWidth) return;
      const { clientWidth, clientHeight } = this.$el;
      this.renderer.setSize(clientWidth, clientHeight, false);
      this.camera.aspect = clientWidth / clientHeight;
      this.camera.updateProjectionMatrix();
      this.paint();
    },
    paint() {
      const half = Math.tan((this.camera.fov * Math.PI) / 360);
      const turned = Math.abs(Math.cos(this.azimuth)), across = Math.abs(Math.sin(this.azimuth));
      const wide = this.wide * turned + this.deep * across, deep = this.deep * turned + this.wide * across;
      const seen = deep * Math.cos(this.tilt) + this.box.max.z * Math.sin(this.tilt);
      const away = 1.06 * Math.max(seen / half, wide / half / this.camera.aspect) + this.box.max.z;
      const flat = Math.sin(this.tilt) * away;
      this.camera.position.set(
        this.centre.x + flat * Math.sin(this.azimuth),
        this.centre.y - flat * Math.cos(this.azimuth),
        this.centre.z + Math.cos(this.tilt) * away,
      );
      this.camera.lookAt(this.centre);
      this.renderer.render(this.scene, this.camera);
    },
    grip(event) {
      this.held = { x: event.clientX, y: event.clientY };
      this.$el.setPointerCapture(event.pointerId);
    },
    turn(event) {
      if (!this.held) return;
      this.turn_by((this.held.x - event.clientX) / 130, (this.held.y - event.clientY) / 130);
      this.held = { x: event.clientX, y: event.clientY };
    },
    let_go() {
      this.held = null;
    },
    key(event) {
      const step = { ArrowLeft: [-0.15, 0], ArrowRight: [0.15, 0], ArrowUp: [0, -0.12], ArrowDown: [0, 0.12] }[event.key];
      if (!step) return;
      event.preventDefault();
      this.turn_by(...step);
    },
    turn_by(around, over) {
      if (!this.box) return;
      this.azimuth += around;
      this.tilt = Math.min(1.45, Math.max(0.02, this.tilt + over));
      this.paint();
    },
  },
};

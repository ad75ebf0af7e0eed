/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { addressOf, readAddress, type Shared } from "../live/address.js";
import { type LiveModel, modelFor } from "../live/model.js";
import { initialSettings } from "../live/settings.js";
import { firstUnits } from "../notebook/measure.js";
import type { PanelFacts } from "../notebook/output.js";
import { liveFigure } from "../report/livefigure.js";
import { liveResults } from "../report/livepanel.js";
import { copyText } from "./copy.js";
import { fillForm, sayWhereSlidersStand, settingsIn, unitsIn } from "./form.js";
import { PatchedPlace } from "./patch.js";

/** How long a reader's hand rests before the sentence is spoken and the address written [ms]. */
const rest = 250;

/** How often an answer is rehearsed before it is asked for [-]. */
const rehearsals = 8;

/** The part of a page that answers the controls. */
class LivePanelOnPage {
  readonly #model: LiveModel;
  readonly #place: HTMLElement;
  readonly #form: HTMLFormElement;
  readonly #figure: HTMLElement;
  readonly #drawing: PatchedPlace;
  readonly #numbers: PatchedPlace;
  #sentence = "";
  #width = 0;
  #drawn = false;
  #late = false;
  #timer: number | undefined;

  constructor(place: HTMLElement, model: LiveModel) {
    this.#place = place;
    this.#model = model;
    this.#form = this.#part("form");
    this.#figure = this.#part("figure");
    this.#drawing = new PatchedPlace(this.#figure);
    this.#numbers = new PatchedPlace(this.#part(".numbers-now"));
  }

  /** Takes a setting from the address, and follows the reader. */
  start(): void {
    this.#width = this.#figure.clientWidth;
    if (this.#takeAddress()) this.#place.scrollIntoView();
    // A reader may have been faster than this script.
    else if (this.#address() !== "") this.#changed();
    this.#form.addEventListener("input", () => this.#changed());
    this.#form.addEventListener("submit", (event) => event.preventDefault());
    this.#form.addEventListener("reset", (event) => {
      event.preventDefault();
      this.#take({ settings: initialSettings(this.#model.controls), units: firstUnits });
      this.#tell("");
      this.#changed();
    });
    this.#part<HTMLButtonElement>("button.copy").addEventListener("click", () => void this.#copy());
    window.addEventListener("hashchange", () => this.#takeAddress());
    new ResizeObserver(() => this.#fit()).observe(this.#figure);
    this.#prepare(rehearsals);
  }

  /** Computed some times while nobody asks, so that the first answers find the browser prepared. */
  #prepare(times: number): void {
    if (times === 0) return;
    window.requestIdleCallback?.(() => {
      this.#answer(this.#shared());
      this.#prepare(times - 1);
    });
  }

  #part<Part extends Element>(selector: string): Part {
    const part = this.#place.querySelector<Part>(selector);
    if (part === null) throw new Error(`The live panel has no ${selector}.`);
    return part;
  }

  #shared(): Shared {
    return { settings: settingsIn(this.#form, this.#model.controls), units: unitsIn(this.#form) };
  }

  #take({ settings, units }: Shared): void {
    fillForm(this.#form, settings, units);
    sayWhereSlidersStand(this.#form, this.#model.controls, settings, units);
  }

  /** Takes the setting that the address asks for; false where it asks for none. */
  #takeAddress(): boolean {
    const read = readAddress(this.#model.controls, window.location.hash);
    if (read === undefined) return false;
    this.#take(read);
    this.#tell(read.refusals.join(" "));
    this.#draw();
    this.#settle();
    return true;
  }

  #changed(): void {
    this.#part<HTMLElement>(".link").hidden = true;
    this.#redraw();
    window.clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => {
      this.#settle();
      this.#writeAddress();
    }, rest);
  }

  /** Draws for the room that there is; asked of the observer, as the browser would lay the page out once more to answer a question. */
  #fit(): void {
    const { clientWidth } = this.#figure;
    if (clientWidth === this.#width) return;
    this.#width = clientWidth;
    this.#redraw();
  }

  /** Draws at once, and once more with the next picture of the screen when it was asked again by then. */
  #redraw(): void {
    if (this.#drawn) {
      this.#late = true;
      return;
    }
    this.#drawn = true;
    this.#draw();
    window.requestAnimationFrame(() => {
      this.#drawn = false;
      if (this.#late) this.#redraw();
    });
  }

  #draw(): void {
    this.#late = false;
    const { settings, units } = this.#shared();
    const { numbers, drawing, sentence } = this.#answer({ settings, units });
    sayWhereSlidersStand(this.#form, this.#model.controls, settings, units);
    this.#numbers.write(numbers);
    this.#drawing.write(drawing);
    this.#sentence = sentence;
  }

  #answer({ settings, units }: Shared) {
    const { results, figure, sentence } = this.#model.compute(settings, units);
    return { numbers: liveResults(results).text, drawing: liveFigure(figure, this.#width).text, sentence };
  }

  /** What is said waits until the reader rests, so that it is spoken once; a picture of the screen may take longer still. */
  #settle(): void {
    if (this.#late) this.#draw();
    if (this.#sentence !== "") this.#part(".sentence").textContent = this.#sentence;
  }

  #address(): string {
    return addressOf(this.#model.controls, this.#shared());
  }

  #writeAddress(): void {
    const address = this.#address();
    const { pathname, search } = window.location;
    window.history.replaceState(null, "", address === "" ? pathname + search : address);
  }

  async #copy(): Promise<void> {
    this.#writeAddress();
    const link = window.location.href;
    if (await copyText(link)) return this.#tell("The link is copied.");
    const box = this.#part<HTMLElement>(".link");
    const field = this.#part<HTMLInputElement>(".link input");
    box.hidden = false;
    field.value = link;
    field.select();
    this.#tell("The link stands here, ready to be copied.");
  }

  #tell(text: string): void {
    this.#part(".told").textContent = text;
  }
}

/** Starts the panels of a model on the page that has loaded it, each for what the page gives it. */
export function startPanels(model: LiveModel): void {
  for (const place of document.querySelectorAll<HTMLElement>("[data-live-model]")) {
    const { liveModel, liveFacts } = place.dataset;
    if (liveModel !== model.name) continue;
    const facts = liveFacts === undefined ? undefined : (JSON.parse(liveFacts) as PanelFacts);
    new LivePanelOnPage(place, modelFor(model, facts)).start();
  }
}

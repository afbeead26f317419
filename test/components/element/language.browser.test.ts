import { expect } from 'chai';
import { languageOf } from '../../../components/element/language.js';

/** The language of what stands under `#here` in some markup; a `<template shadowrootmode>` makes a shadow root. */
function languageAt(markup: string): string {
  const place = document.createElement('main');
  document.body.append(place);
  place.setHTMLUnsafe(markup);
  const find = (root: ParentNode): Element | undefined =>
    root.querySelector('#here') ??
    [...root.querySelectorAll('*')].flatMap(({ shadowRoot }) => (shadowRoot ? (find(shadowRoot) ?? []) : []))[0];
  const language = languageOf(find(place)!);
  place.remove();
  return language;
}

describe('the language of a place on a page', () => {
  const before = document.documentElement.lang;
  afterEach(() => {
    document.documentElement.lang = before;
  });

  const cases: [what: string, markup: string, language: string][] = [
    ['of an ancestor', '<div lang="de"><p id="here"></p></div>', 'de'],
    ['of the nearest one', '<div lang="de"><div lang="fr"><p id="here"></p></div></div>', 'fr'],
    ['its own', '<div lang="de"><p id="here" lang="pt_br"></p></div>', 'pt-BR'],
    ['not known where it is said to be none', '<div lang="de"><p id="here" lang=""></p></div>', 'en'],
    [
      'outside the shadow root',
      '<div lang="de"><template shadowrootmode="open"><p id="here"></p></template></div>',
      'de',
    ],
    ['as XML says it', '<div xml:lang="de"><p id="here"></p></div>', 'de'],
    ['as XML says it, in a drawing', '<svg xml:lang="de"><g id="here"></g></svg>', 'de'],
    ['by HTML before XML', '<div lang="fr" xml:lang="de"><p id="here"></p></div>', 'fr'],
  ];
  for (const [what, markup, language] of cases) {
    it(what, () => {
      document.documentElement.lang = 'en';
      expect(languageAt(markup)).to.equal(language);
    });
  }

  it('of the page, and English where the page says none', () => {
    document.documentElement.lang = 'de_DE';
    expect(languageAt('<p id="here"></p>')).to.equal('de-DE');
    document.documentElement.removeAttribute('lang');
    expect(languageAt('<p id="here"></p>')).to.equal('en');
  });
});

import { css } from 'lit';

export const gridStyles = css``;

import { css } from 'lit';

/** A table wider than its place fades at the edge as long as there is more beyond it; where it has been read to its end it does not. */
export const edgeFade = css`
  @supports (animation-timeline: scroll()) {
    @media screen {
      .table-scroll,
      .numbers-scroll {
        animation: edge-fade linear both;
        animation-timeline: scroll(self inline);
      }
    }
  }
  @keyframes edge-fade {
    0%,
    98% {
      mask-image: linear-gradient(to left, rgb(0 0 0 / 15%), #000 28px);
    }
    100% {
      mask-image: none;
    }
  }
`;

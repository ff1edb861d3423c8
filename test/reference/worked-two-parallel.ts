/** Two parallel pipes between reservoirs 8 m apart, a published example used with two kinds of drive. */
import { pipe, plain, reservoir } from './worked-network.ts';

export const twoParallel = {
  ...plain,
  staticHead: 8,
  discharge: {
    run: [],
    branches: [
      reservoir('4 cm', 0, [pipe(0.04, 36, 4.5e-5)]),
      reservoir('8 cm', 0, [pipe(0.08, 36, 4.5e-5)]),
    ],
  },
};

export const twoParallelSource =
  'Cengel and Cimbala, Fluid Mechanics: Fundamentals and Applications, Example 8-7 (inputs seen; printed results from memory, recomputed from the equations)';

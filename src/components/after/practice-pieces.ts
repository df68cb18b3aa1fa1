export { default } from "../shop/KeepBend.tsx";
